-- What a performance was ended with: the entry that withdrew, or an earlier performance of the team. Taken back, so is
-- this one.
alter table performance add column ended_with uuid;
