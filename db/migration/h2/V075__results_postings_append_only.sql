create trigger result_posting_stays before update, delete on result_posting
for each row call 'rimebook.audit.AppendOnlyTrigger';
-- See V012: a key of a row to itself keeps the table from being emptied.
alter table result_posting add constraint result_posting_never_emptied foreign key (id) references result_posting (id);
