create trigger ruling_question_stays before update or delete or truncate on ruling_question
for each statement execute function refuse_rewriting();
create trigger ruling_stays before update or delete or truncate on ruling
for each statement execute function refuse_rewriting();
