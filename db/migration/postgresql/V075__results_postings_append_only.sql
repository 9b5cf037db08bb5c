create trigger result_posting_stays before update or delete or truncate on result_posting
for each statement execute function refuse_rewriting();
