create trigger past_cancellation_stays before update, delete on past_cancellation
for each row call 'rimebook.audit.AppendOnlyTrigger';
-- See V012: a key of a row to itself keeps the table from being emptied.
alter table past_cancellation add constraint past_cancellation_never_emptied
foreign key (id) references past_cancellation (id);
