create trigger result_signature_stays before update or delete or truncate on result_signature
for each statement execute function refuse_rewriting();
