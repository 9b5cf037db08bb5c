create table competition (
  id uuid primary key,
  version int not null,
  slug varchar(80) not null constraint competition_slug_once unique,
  name varchar(120) not null,
  place varchar(120) not null,
  zone varchar(60) not null,
  first_day date not null,
  last_day date not null,
  rulebook varchar(300) not null,
  state varchar(20) not null
);

create table event (
  id uuid primary key,
  version int not null,
  competition_id uuid not null references competition (id),
  position int not null,
  slug varchar(80) not null,
  name varchar(120) not null,
  method varchar(20) not null,
  judges int not null,
  even_panel_reason varchar(500) not null,
  -- The chosen value of every policy the rulebooks leave open, as JSON.
  policies varchar(2000) not null,
  constraint event_slug_once unique (competition_id, slug)
);

create table segment (
  id uuid primary key,
  version int not null,
  event_id uuid not null references event (id),
  position int not null,
  slug varchar(80) not null,
  name varchar(120) not null,
  kind varchar(20) not null,
  -- Hundredths: 50 is a factor of 0.5.
  factor int not null,
  programme_seconds int not null,
  tolerance_seconds int not null,
  constraint segment_slug_once unique (event_id, slug)
);
