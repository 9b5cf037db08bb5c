-- A drawn order is never edited: a re-draw is a further row with its reason.
create table starting_order (
  id uuid primary key,
  segment_id uuid not null references segment (id),
  number int not null,
  method varchar(30) not null,
  seed varchar(200) not null,
  group_maximum int not null,
  drawn_at timestamp(3) with time zone not null,
  drawn_by varchar(120) not null,
  reason varchar(500) not null,
  constraint starting_order_number_once unique (segment_id, number)
);

create table start_position (
  order_id uuid not null references starting_order (id),
  number int not null,
  group_number int not null,
  entry_id uuid not null references entry (id),
  ticket varchar(64) not null,
  primary key (order_id, number)
);
