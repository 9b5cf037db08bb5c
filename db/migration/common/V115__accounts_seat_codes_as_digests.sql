-- Of a seat's code only a digest is kept. What was kept in the clear before is replaced by its digest at the first
-- start, before anybody is let in; after that the column code is empty for ever.
alter table seat_code add column code_digest varchar(64) constraint seat_code_digest_once unique;
alter table seat_code alter column code drop not null;
