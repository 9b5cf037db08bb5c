-- What a team means to skate in a segment: the codes in order, with a blank between them. Free to change until
-- the segment is opened; the record keeps every earlier plan.
create table planned_programme (
  id uuid primary key,
  version int not null,
  entry_id uuid not null references entry (id),
  segment_id uuid not null references segment (id),
  codes varchar(1000) not null,
  constraint planned_programme_once unique (entry_id, segment_id)
);
