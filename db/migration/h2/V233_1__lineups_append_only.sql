create trigger lineup_stays before update, delete on lineup
for each row call 'rimebook.audit.AppendOnlyTrigger';
