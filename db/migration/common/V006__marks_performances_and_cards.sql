create table performance (
  id uuid primary key,
  version int not null,
  segment_id uuid not null references segment (id),
  entry_id uuid not null references entry (id),
  start_number int not null,
  group_number int not null,
  status varchar(20) not null,
  status_reason varchar(500) not null,
  called_at timestamp(3) with time zone,
  closed_at timestamp(3) with time zone,
  constraint performance_entry_once unique (segment_id, entry_id),
  constraint performance_number_once unique (segment_id, start_number)
);

-- Every version of every card, never changed: the newest sequence of a seat counts.
create table card_submission (
  id uuid primary key,
  performance_id uuid not null references performance (id),
  seat_id uuid not null references seat (id),
  sequence int not null,
  -- Hundredths: 560 is a mark of 5.6.
  first_mark int not null,
  second_mark int not null,
  origin varchar(20) not null,
  received_at timestamp(3) with time zone not null,
  constraint card_sequence_once unique (performance_id, seat_id, sequence)
);

create table remark (
  id uuid primary key,
  performance_id uuid not null references performance (id),
  kind varchar(20) not null,
  text varchar(500) not null,
  noted_by varchar(120) not null,
  noted_at timestamp(3) with time zone not null
);
