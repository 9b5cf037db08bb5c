-- A published version is never changed: a new fact makes a new row.
create table result_version (
  id uuid primary key,
  scope varchar(10) not null,
  scope_id uuid not null,
  number int not null,
  state varchar(20) not null,
  cause varchar(20) not null,
  note varchar(1000) not null,
  published_at timestamp(3) with time zone not null,
  fingerprint varchar(64) not null,
  body varchar(1000000) not null,
  constraint result_version_number_once unique (scope_id, number)
);

-- Where a segment stands between its first card and its two signatures.
create table segment_result (
  segment_id uuid primary key references segment (id),
  version int not null,
  state varchar(20) not null,
  -- The number of the segment's newest standing.
  standing_number int not null,
  on_ice_entry_id uuid references entry (id),
  posted_at timestamp(3) with time zone,
  posted_by varchar(120) not null,
  referee_signature varchar(120) not null,
  referee_signed_at timestamp(3) with time zone,
  accountant_signature varchar(120) not null,
  accountant_signed_at timestamp(3) with time zone
);
