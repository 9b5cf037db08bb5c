-- What binds an official to a team, as declared; last_day is empty while it lasts.
create table official_interest (
  id uuid primary key,
  official_id uuid not null references official (id),
  kind varchar(30) not null,
  team varchar(120) not null,
  last_day date,
  constraint official_interest_once unique (official_id, kind, team)
);
