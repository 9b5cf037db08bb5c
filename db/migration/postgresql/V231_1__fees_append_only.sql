-- See V012: a key of a row to itself keeps the table from being emptied.
alter table fee_terms add constraint fee_terms_never_emptied foreign key (id) references fee_terms (id);
create trigger fee_terms_stays before update or delete or truncate on fee_terms
for each statement execute function refuse_rewriting();
alter table fee_ledger add constraint fee_ledger_never_emptied foreign key (id) references fee_ledger (id);
create trigger fee_ledger_stays before update or delete or truncate on fee_ledger
for each statement execute function refuse_rewriting();
