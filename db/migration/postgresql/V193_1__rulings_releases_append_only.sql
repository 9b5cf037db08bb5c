create trigger ruling_release_stays before update or delete or truncate on ruling_release
for each statement execute function refuse_rewriting();
