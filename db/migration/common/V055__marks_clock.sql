-- Every touch of a performance's clock, never changed: what was a slip is taken back by a further touch.
create table clock_tap (
  id uuid primary key,
  performance_id uuid not null references performance (id),
  sequence int not null,
  act varchar(20) not null,
  cause varchar(20),
  marking varchar(20),
  words varchar(200) not null,
  noted_by varchar(120) not null,
  noted_at timestamp(3) with time zone not null,
  constraint clock_tap_sequence_once unique (performance_id, sequence)
);
