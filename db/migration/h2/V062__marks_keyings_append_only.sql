create trigger card_keying_stays before update, delete on card_keying
for each row call 'rimebook.audit.AppendOnlyTrigger';
-- See V012: a key of a row to itself keeps the table from being emptied.
alter table card_keying add constraint card_keying_never_emptied
foreign key (id) references card_keying (id);
