-- That somebody looked at two people of one name and birth date and found them to be two: nobody is asked again, until it
-- is taken back. The two lie in the order of their identities; a person may be of another competition, or deleted.
create table skater_apart (
  id uuid primary key,
  one_id uuid not null references skater (id),
  other_id uuid not null references skater (id),
  reason varchar(500) not null,
  said_by varchar(120) not null,
  said_at timestamp(3) with time zone not null,
  taken_back_reason varchar(500) not null,
  taken_back_by varchar(120) not null,
  taken_back_at timestamp(3) with time zone
);
create index skater_apart_one on skater_apart (one_id);
create index skater_apart_other on skater_apart (other_id);
create index skater_born on skater (birth_date);
