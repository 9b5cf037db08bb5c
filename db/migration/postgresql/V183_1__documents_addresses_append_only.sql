create trigger paper_address_stays before update or delete or truncate on paper_address
for each statement execute function refuse_rewriting();
