create trigger ruling_question_stays before update, delete on ruling_question
for each row call 'rimebook.audit.AppendOnlyTrigger';
create trigger ruling_stays before update, delete on ruling
for each row call 'rimebook.audit.AppendOnlyTrigger';
-- See V012: a key of a row to itself keeps the table from being emptied.
alter table ruling add constraint ruling_never_emptied foreign key (id) references ruling (id);
