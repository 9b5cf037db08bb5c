create trigger arrival_note_stays before update, delete on arrival_note
for each row call 'rimebook.audit.AppendOnlyTrigger';
