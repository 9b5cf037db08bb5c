-- Which line of the record each place outside this database was last known to hold.
create table record_anchor (
  place varchar(120) primary key,
  line bigint not null,
  digest varchar(64) not null,
  kept_at timestamp(3) with time zone not null
);

-- Who did it, and when, is what lines are looked for by, beside what they are about.
create index record_line_actor on record_line (actor_id);
create index record_line_written on record_line (written_at);
