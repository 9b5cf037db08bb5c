create trigger panel_change_stays before update, delete on panel_change
for each row call 'rimebook.audit.AppendOnlyTrigger';
alter table panel_change add constraint panel_change_never_emptied
foreign key (id) references panel_change (id);
