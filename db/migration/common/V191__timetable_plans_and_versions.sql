-- The plan of the days: every state it had, the greatest number counts. What was changed is taken back by a further one.
create table timetable_plan (
  id uuid primary key,
  competition_id uuid not null references competition (id),
  number int not null,
  -- What was done, as on the record.
  act varchar(60) not null,
  body varchar(1000000) not null,
  made_by varchar(120) not null,
  made_at timestamp(3) with time zone not null,
  constraint timetable_plan_number_once unique (competition_id, number)
);

-- What was promised to everybody.
create table timetable_version (
  id uuid primary key,
  competition_id uuid not null references competition (id),
  number int not null,
  -- The plan that it was made of.
  plan_number int not null,
  note varchar(500) not null,
  body varchar(1000000) not null,
  published_by varchar(120) not null,
  published_at timestamp(3) with time zone not null,
  constraint timetable_version_number_once unique (competition_id, number)
);
