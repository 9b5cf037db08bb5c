-- The record: one line a change, each holding the digest of the line before it.
create table record_line (
  number bigint primary key,
  written_at timestamp(3) with time zone not null,
  actor varchar(120) not null,
  role varchar(20) not null,
  device varchar(200) not null,
  subject varchar(40) not null,
  subject_id varchar(80) not null,
  action varchar(60) not null,
  before_text varchar(100000) not null,
  after_text varchar(100000) not null,
  reason varchar(2000) not null,
  previous_digest varchar(64) not null,
  digest varchar(64) not null
);

create index record_line_subject on record_line (subject, subject_id);

-- The end of the chain; locked by whoever appends, so that lines never fork.
create table record_head (
  id int primary key,
  number bigint not null,
  digest varchar(64) not null
);
