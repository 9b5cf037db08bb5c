-- Where the panel of a segment differs from the one that was drawn: a substitute who takes over a judge's seat, a
-- judge left out, a card that never came. Evidence: written once; the newest line about a seat counts.
create table panel_change (
  id uuid primary key,
  segment_id uuid not null references segment (id),
  sequence int not null,
  kind varchar(20) not null,
  seat_id uuid not null references seat (id),
  substitute_id uuid references seat (id),
  performance_id uuid references performance (id),
  rule varchar(120) not null,
  reason varchar(500) not null,
  made_by varchar(120) not null,
  made_at timestamp(3) with time zone not null,
  constraint panel_change_sequence_once unique (segment_id, sequence)
);
