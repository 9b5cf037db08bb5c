create table protest (
  id uuid primary key,
  version int not null,
  segment_id uuid not null references segment (id),
  entry_id uuid not null references entry (id),
  category varchar(30) not null,
  text varchar(2000) not null,
  filed_by varchar(120) not null,
  received_by varchar(120) not null,
  filed_at timestamp(3) with time zone not null,
  state varchar(20) not null,
  grounds varchar(2000) not null,
  decided_by varchar(120) not null,
  decided_at timestamp(3) with time zone
);

create table correction (
  id uuid primary key,
  version int not null,
  segment_id uuid not null references segment (id),
  performance_id uuid not null references performance (id),
  seat_id uuid not null references seat (id),
  protest_id uuid references protest (id),
  old_first int not null,
  old_second int not null,
  new_first int not null,
  new_second int not null,
  reason varchar(2000) not null,
  state varchar(20) not null,
  proposed_by varchar(120) not null,
  proposed_at timestamp(3) with time zone not null,
  decided_by varchar(120) not null,
  decided_at timestamp(3) with time zone,
  decision_reason varchar(2000) not null
);
