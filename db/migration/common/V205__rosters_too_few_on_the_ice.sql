-- What follows where fewer are on the ice than an event asks for.
alter table event_rules add column when_fewer varchar(300) default '' not null;
