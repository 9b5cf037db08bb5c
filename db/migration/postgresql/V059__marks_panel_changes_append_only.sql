create trigger panel_change_stays before update or delete or truncate on panel_change
for each statement execute function refuse_rewriting();
