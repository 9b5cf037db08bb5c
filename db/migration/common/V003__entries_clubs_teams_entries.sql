create table club (
  id uuid primary key,
  version int not null,
  name varchar(120) not null constraint club_name_once unique,
  town varchar(120) not null
);

create table team (
  id uuid primary key,
  version int not null,
  club_id uuid not null references club (id),
  name varchar(120) not null,
  spoken_as varchar(120) not null,
  constraint team_name_once_in_club unique (club_id, name)
);

create table entry (
  id uuid primary key,
  version int not null,
  event_id uuid not null references event (id),
  team_id uuid not null references team (id),
  state varchar(20) not null,
  late_reason varchar(500) not null,
  entered_at timestamp(3) with time zone not null,
  withdrawn_at timestamp(3) with time zone,
  withdrawn_reason varchar(500) not null,
  constraint entry_once_in_event unique (event_id, team_id)
);
