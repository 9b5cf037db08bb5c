-- The rule set and level of an event judged by points; empty for placement judging. The rule sets themselves
-- come with the service: an event keeps the one it names.
alter table event add column rule_set varchar(80) default '' not null;
alter table event add column skating_level varchar(60) default '' not null;
