-- Music that was handed in, a row a version: the greatest number counts. The sound itself lies elsewhere, known by its digest.
create table music_version (
  id uuid primary key,
  entry_id uuid not null references entry (id),
  segment_id uuid not null references segment (id),
  number int not null,
  kind varchar(10) not null,
  -- What the file was called where it came from, for people to know it again.
  file_name varchar(200) not null,
  bytes bigint not null,
  milliseconds bigint not null,
  sha256 varchar(64) not null,
  -- Why it was taken after the deadline; empty in time.
  late_reason varchar(500) not null,
  handed_in_by varchar(120) not null,
  handed_in_at timestamp(3) with time zone not null,
  constraint music_version_number_once unique (entry_id, segment_id, number)
);
create index music_version_of_segment on music_version (segment_id);
create index music_version_of_digest on music_version (sha256);

-- That the team brings its music to the rink, or that this was a slip: the greatest number counts.
create table music_on_site (
  id uuid primary key,
  entry_id uuid not null references entry (id),
  segment_id uuid not null references segment (id),
  number int not null,
  on_site boolean not null,
  noted_by varchar(120) not null,
  noted_at timestamp(3) with time zone not null,
  constraint music_on_site_number_once unique (entry_id, segment_id, number)
);
create index music_on_site_of_segment on music_on_site (segment_id);

-- What the music desk played. The identity and the time come from the desk, which may have been without network.
create table music_play (
  id uuid primary key,
  entry_id uuid not null references entry (id),
  segment_id uuid not null references segment (id),
  version_id uuid not null references music_version (id),
  started_at timestamp(3) with time zone not null,
  played_by varchar(120) not null,
  noted_at timestamp(3) with time zone not null
);
create index music_play_of_segment on music_play (segment_id);

-- Until when a competition takes music; the greatest number counts, none at all is for ever.
create table music_deadline (
  id uuid primary key,
  competition_id uuid not null references competition (id),
  number int not null,
  closes_at timestamp(3) with time zone,
  set_by varchar(120) not null,
  set_at timestamp(3) with time zone not null,
  constraint music_deadline_number_once unique (competition_id, number)
);

-- That the sound of a competition was deleted. Its versions and digests stay.
create table music_deletion (
  id uuid primary key,
  competition_id uuid not null references competition (id),
  files int not null,
  bytes bigint not null,
  deleted_by varchar(120) not null,
  deleted_at timestamp(3) with time zone not null
);
create index music_deletion_of_competition on music_deletion (competition_id);
