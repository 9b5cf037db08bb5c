create trigger remark_seen_stays before update or delete or truncate on remark_seen
for each statement execute function refuse_rewriting();
