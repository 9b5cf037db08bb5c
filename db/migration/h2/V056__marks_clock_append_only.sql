create trigger clock_tap_stays before update, delete on clock_tap
for each row call 'rimebook.audit.AppendOnlyTrigger';
alter table clock_tap add constraint clock_tap_never_emptied
foreign key (id) references clock_tap (id);
