create trigger past_cancellation_stays before update or delete or truncate on past_cancellation
for each statement execute function refuse_rewriting();
