-- A second tablet with the right code waits for the referee's word while the seat's own tablet is alive. It holds its
-- token already; of that only the digest is kept, and it opens nothing before the word.
alter table seat_code add column asked_digest varchar(64);
alter table seat_code add column asked_device varchar(200) default '' not null;
alter table seat_code add column asked_at timestamp(3) with time zone;
alter table seat_code add column asked_refused boolean default false not null;
create index seat_code_asked on seat_code (asked_digest);
