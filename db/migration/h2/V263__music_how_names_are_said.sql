-- How a team says its own name, at most 20 seconds and a megabyte: what counts is there, what it took the place of is gone.
create table spoken_name (
  team_id uuid primary key references team (id),
  kind varchar(10) not null,
  milliseconds bigint not null,
  bytes bigint not null,
  sha256 varchar(64) not null,
  recorded_by varchar(120) not null,
  recorded_at timestamp(3) with time zone not null,
  content varbinary(1048576) not null
);
