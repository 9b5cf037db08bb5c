-- Points judging. Every version is written once and never changed: the newest sequence counts.

create table called_list (
  id uuid primary key,
  performance_id uuid not null references performance (id),
  sequence int not null,
  -- The elements in the order skated, as JSON. An element keeps its identity from version to version, so that
  -- its grades stay with it when others are put in or taken out.
  elements varchar(10000) not null,
  origin varchar(20) not null,
  called_by varchar(120) not null,
  received_at timestamp(3) with time zone not null,
  constraint called_list_sequence_once unique (performance_id, sequence)
);

create table points_card (
  id uuid primary key,
  performance_id uuid not null references performance (id),
  seat_id uuid not null references seat (id),
  sequence int not null,
  -- Grades by element and marks by component in hundredths, as JSON.
  marks varchar(10000) not null,
  origin varchar(20) not null,
  received_at timestamp(3) with time zone not null,
  constraint points_card_sequence_once unique (performance_id, seat_id, sequence)
);

create table deduction_list (
  id uuid primary key,
  performance_id uuid not null references performance (id),
  sequence int not null,
  -- Items of the rule set's table with their counts, as JSON.
  items varchar(10000) not null,
  noted_by varchar(120) not null,
  received_at timestamp(3) with time zone not null,
  constraint deduction_list_sequence_once unique (performance_id, sequence)
);
