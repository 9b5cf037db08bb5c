create trigger fee_terms_stays before update, delete on fee_terms
for each row call 'rimebook.audit.AppendOnlyTrigger';
create trigger fee_ledger_stays before update, delete on fee_ledger
for each row call 'rimebook.audit.AppendOnlyTrigger';
