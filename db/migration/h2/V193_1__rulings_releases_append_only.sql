create trigger ruling_release_stays before update, delete on ruling_release
for each row call 'rimebook.audit.AppendOnlyTrigger';
-- See V012: a key of a row to itself keeps the table from being emptied.
alter table ruling_release add constraint ruling_release_never_emptied foreign key (id) references ruling_release (id);
