-- What the secretary writes down for whoever announces or comments: shown to them alone, and free to change.
create table announced_programme (
  id uuid primary key,
  version int not null,
  entry_id uuid not null references entry (id),
  segment_id uuid not null references segment (id),
  -- How many skate it; null where that was not given.
  skaters int,
  -- What they skate to, empty where that was not given.
  music varchar(300) not null,
  constraint announced_programme_once unique (entry_id, segment_id)
);

-- The personal links of commentators. Of the token in a link only the digest is kept.
create table commentary_link (
  id uuid primary key,
  version int not null,
  competition_id uuid not null references competition (id),
  person varchar(120) not null,
  token_digest varchar(64) not null,
  -- Whether the elements may be told while they are called.
  calls boolean not null,
  issued_by varchar(120) not null,
  issued_at timestamp(3) with time zone not null,
  expires_at timestamp(3) with time zone not null,
  revoked_by varchar(120) not null,
  revoked_at timestamp(3) with time zone,
  opened_at timestamp(3) with time zone,
  constraint commentary_link_token_once unique (token_digest)
);
create index commentary_link_of_competition on commentary_link (competition_id);

-- That the referee lets commentators speak of a question before it is ruled on, or no longer: the greatest number counts.
create table ruling_release (
  id uuid primary key,
  question_id uuid not null references ruling_question (id),
  number int not null,
  released boolean not null,
  given_by varchar(120) not null,
  given_at timestamp(3) with time zone not null,
  constraint ruling_release_number_once unique (question_id, number)
);
