-- Why an event or a segment does not take place, and since when; empty while it does.
alter table event add column cancelled varchar(500) default '' not null;
alter table event add column cancelled_at timestamp(3) with time zone;
alter table segment add column cancelled varchar(500) default '' not null;
alter table segment add column cancelled_at timestamp(3) with time zone;
-- Whether a result of the event is signed only after the time for protests.
alter table event add column signature_waits boolean default true not null;
