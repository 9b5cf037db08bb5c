-- Keys and arguments take more room than the English did, and an official may be bound to every team of a large event.
alter table seat alter column override_grounds set data type varchar(1000000);
