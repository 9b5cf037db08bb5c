create trigger paper_address_stays before update, delete on paper_address
for each row call 'rimebook.audit.AppendOnlyTrigger';
-- See V012: a key of a row to itself keeps the table from being emptied.
alter table paper_address add constraint paper_address_never_emptied
foreign key (scope_id, number) references paper_address (scope_id, number);
