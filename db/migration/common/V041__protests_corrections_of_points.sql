-- In points judging a correction changes one mark of one seat: the line of the sheet ("element:3" or
-- "component:Composition") with the grade, or the mark in hundredths, before and after. Empty for placement judging.
alter table correction add column line varchar(120) default '' not null;
alter table correction add column old_value int default 0 not null;
alter table correction add column new_value int default 0 not null;
