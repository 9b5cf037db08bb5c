create trigger letter_sending_stays before update, delete on letter_sending
for each row call 'rimebook.audit.AppendOnlyTrigger';
