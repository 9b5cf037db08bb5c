-- The sound where no folder is at hand: the same bytes once, in pieces that are read one after the other.
create table music_chunk (
  sha256 varchar(64) not null,
  number int not null,
  content bytea not null,
  primary key (sha256, number)
);
