create table official (
  id uuid primary key,
  version int not null,
  name varchar(120) not null constraint official_name_once unique,
  club varchar(120) not null,
  qualification varchar(120) not null
);

create table seat (
  id uuid primary key,
  version int not null,
  event_id uuid not null references event (id),
  kind varchar(30) not null,
  number int not null,
  official_id uuid references official (id),
  override_reason varchar(500) not null,
  constraint seat_once unique (event_id, kind, number)
);
