-- What an event asks of its rosters; null asks nothing.
create table event_rules (
  event_id uuid primary key references event (id),
  version int not null,
  copied_from varchar(60) not null,
  least_on_ice int,
  most_on_ice int,
  most_alternates int,
  roster_limit int,
  youngest int,
  oldest int,
  -- The bounds of those who need not be inside the first two.
  others_youngest int,
  others_oldest int,
  cut_off date,
  -- How many of a hundred have to be inside.
  age_share int not null,
  alternates_count boolean not null,
  one_team boolean not null,
  other_skaters int,
  membership_number boolean not null,
  -- Until when rosters change freely.
  deadline timestamp(3) with time zone
);

-- That a rule is not held against a team, or against one of its people.
create table waiver (
  id uuid primary key,
  version int not null,
  entry_id uuid not null references entry (id),
  rule varchar(30) not null,
  place_id uuid references roster_place (id),
  reason varchar(500) not null,
  given_by varchar(120) not null,
  given_at timestamp(3) with time zone not null,
  taken_back_reason varchar(500) not null,
  taken_back_by varchar(120) not null,
  taken_back_at timestamp(3) with time zone
);
create index waiver_of_entry on waiver (entry_id);
