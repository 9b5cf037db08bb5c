create trigger card_keying_stays before update or delete or truncate on card_keying
for each statement execute function refuse_rewriting();
