-- The links of teams' managers, one an entry. Of the token in a link only the digest is kept.
create table team_link (
  id uuid primary key,
  version int not null,
  competition_id uuid not null references competition (id),
  entry_id uuid not null references entry (id),
  token_digest varchar(64) not null,
  issued_by varchar(120) not null,
  issued_at timestamp(3) with time zone not null,
  expires_at timestamp(3) with time zone not null,
  revoked_by varchar(120) not null,
  revoked_at timestamp(3) with time zone,
  opened_at timestamp(3) with time zone,
  constraint team_link_once unique (entry_id),
  constraint team_link_token_once unique (token_digest)
);
create index team_link_of_competition on team_link (competition_id);
