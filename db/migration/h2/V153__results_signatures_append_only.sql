create trigger result_signature_stays before update, delete on result_signature
for each row call 'rimebook.audit.AppendOnlyTrigger';
-- See V012: a key of a row to itself keeps the table from being emptied.
alter table result_signature add constraint result_signature_never_emptied
foreign key (segment_id, number, signatory) references result_signature (segment_id, number, signatory);
