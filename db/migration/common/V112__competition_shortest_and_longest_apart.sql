-- A programme's shortest and longest are limited apart; null where only the longest is.
alter table segment add column shorter_seconds int;
update segment set shorter_seconds = tolerance_seconds;
