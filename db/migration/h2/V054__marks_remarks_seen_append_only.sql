create trigger remark_seen_stays before update, delete on remark_seen
for each row call 'rimebook.audit.AppendOnlyTrigger';
alter table remark_seen add constraint remark_seen_never_emptied
foreign key (id) references remark_seen (id);
