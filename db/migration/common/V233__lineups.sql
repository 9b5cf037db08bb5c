-- Who was on the ice for a team in a segment, by places on its roster and identities alone: the greatest number counts.
create table lineup (
  id uuid primary key,
  entry_id uuid not null references entry (id),
  segment_id uuid not null references segment (id),
  number int not null,
  roster varchar(8000) not null,
  reason varchar(300) not null,
  kept_by varchar(120) not null,
  kept_at timestamp(3) with time zone not null,
  constraint lineup_number_once unique (entry_id, segment_id, number)
);
create index lineup_of_segment on lineup (segment_id);
