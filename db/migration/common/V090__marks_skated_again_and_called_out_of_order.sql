-- A programme that is skated again as a whole is a performance of its own under the same number; the one that does
-- not count stays as it was, set aside. A team may be called out of the drawn order, with the reason, and one that
-- skates again later waits while others skate.
alter table performance drop constraint performance_entry_once;
alter table performance drop constraint performance_number_once;
alter table performance add column skate int default 1 not null;
alter table performance add column again_for uuid references performance (id);
alter table performance add column postponed boolean default false not null;
alter table performance add column call_reason varchar(500) default '' not null;
alter table performance add constraint performance_entry_once unique (segment_id, entry_id, skate);
alter table performance add constraint performance_number_once unique (segment_id, start_number, skate);
