create trigger clock_tap_stays before update or delete or truncate on clock_tap
for each statement execute function refuse_rewriting();
