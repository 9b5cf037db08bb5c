create trigger timetable_plan_stays before update, delete on timetable_plan
for each row call 'rimebook.audit.AppendOnlyTrigger';
-- See V012: a key of a row to itself keeps the table from being emptied.
alter table timetable_plan add constraint timetable_plan_never_emptied
foreign key (id) references timetable_plan (id);
create trigger timetable_version_stays before update, delete on timetable_version
for each row call 'rimebook.audit.AppendOnlyTrigger';
-- See V012: a key of a row to itself keeps the table from being emptied.
alter table timetable_version add constraint timetable_version_never_emptied
foreign key (id) references timetable_version (id);
