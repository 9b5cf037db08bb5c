create trigger deductions_seen_stays before update or delete or truncate on deductions_seen
for each statement execute function refuse_rewriting();
