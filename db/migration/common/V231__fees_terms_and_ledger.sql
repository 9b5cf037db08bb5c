-- What a competition charges (event_id null), and what one of its events charges otherwise; the greatest number of each counts.
-- Amounts are in the smallest units of the currency; null says nothing.
create table fee_terms (
  id uuid primary key,
  competition_id uuid not null references competition (id),
  event_id uuid references event (id),
  number int not null,
  currency varchar(3) not null,
  per_team bigint,
  per_skater bigint,
  late_surcharge bigint,
  -- Until when an entry is in time; without one it is late once entries had closed.
  late_after timestamp(3) with time zone,
  all_back_until timestamp(3) with time zone,
  share_back int,
  share_until timestamp(3) with time zone,
  set_by varchar(120) not null,
  set_at timestamp(3) with time zone not null,
  constraint fee_terms_number_once unique (competition_id, number)
);

-- The ledger of clubs, a row a booking. What takes one back is a further row with the amount below zero.
create table fee_ledger (
  id uuid primary key,
  competition_id uuid not null references competition (id),
  club_id uuid not null references club (id),
  -- The team it is about; null for the club as a whole.
  entry_id uuid references entry (id),
  number int not null,
  kind varchar(10) not null,
  amount bigint not null,
  currency varchar(3) not null,
  why varchar(500) not null,
  reverses uuid references fee_ledger (id),
  written_by varchar(120) not null,
  written_at timestamp(3) with time zone not null,
  constraint fee_ledger_number_once unique (competition_id, club_id, number),
  constraint fee_ledger_reversed_once unique (reverses)
);
