create trigger timetable_plan_stays before update or delete or truncate on timetable_plan
for each statement execute function refuse_rewriting();
create trigger timetable_version_stays before update or delete or truncate on timetable_version
for each statement execute function refuse_rewriting();
