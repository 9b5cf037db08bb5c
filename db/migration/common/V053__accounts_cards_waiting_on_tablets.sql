-- How many cards a tablet has not been able to hand over, as it last said itself.
alter table seat_code add column waiting int default 0 not null;
