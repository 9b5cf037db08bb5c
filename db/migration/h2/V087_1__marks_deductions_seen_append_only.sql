create trigger deductions_seen_stays before update, delete on deductions_seen
for each row call 'rimebook.audit.AppendOnlyTrigger';
alter table deductions_seen add constraint deductions_seen_never_emptied
foreign key (id) references deductions_seen (id);
