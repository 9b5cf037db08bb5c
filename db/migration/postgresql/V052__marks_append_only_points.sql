create trigger called_list_stays before update or delete or truncate on called_list
for each statement execute function refuse_rewriting();
create trigger points_card_stays before update or delete or truncate on points_card
for each statement execute function refuse_rewriting();
create trigger deduction_list_stays before update or delete or truncate on deduction_list
for each statement execute function refuse_rewriting();
create trigger list_authorisation_stays before update or delete or truncate on list_authorisation
for each statement execute function refuse_rewriting();
