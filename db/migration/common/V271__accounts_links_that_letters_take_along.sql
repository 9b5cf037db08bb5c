-- Links that somebody carries to a team: each opens the page from when it has arrived, or was used. Until then the
-- link before does. Of the token only the digest is kept, and the row goes once it is known what became of it.
create table team_link_under_way (
  id uuid primary key,
  competition_id uuid not null references competition (id),
  entry_id uuid not null references entry (id),
  carried_by uuid not null,
  token_digest varchar(64) not null,
  issued_by varchar(120) not null,
  issued_at timestamp(3) with time zone not null,
  asked_at timestamp(3) with time zone not null,
  expires_at timestamp(3) with time zone not null,
  constraint team_link_under_way_once unique (carried_by),
  constraint team_link_under_way_token_once unique (token_digest)
);
create index team_link_under_way_of_competition on team_link_under_way (competition_id);
create index team_link_under_way_of_entry on team_link_under_way (entry_id);
-- What carried the link that is in force, and when somebody asked for that; null where it was given by hand.
alter table team_link add column carried_by uuid;
alter table team_link add column asked_at timestamp(3) with time zone;
