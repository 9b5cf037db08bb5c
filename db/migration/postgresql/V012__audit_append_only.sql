insert into record_head (id, number, digest)
values (1, 0, '0000000000000000000000000000000000000000000000000000000000000000');

create function refuse_rewriting() returns trigger language plpgsql as $$
begin
  raise exception 'The table % keeps what was written: its rows are never changed or deleted. A new fact is a new row.',
    tg_table_name using errcode = '23001';
end
$$;

create trigger record_line_stays before update or delete or truncate on record_line
for each statement execute function refuse_rewriting();
create trigger result_version_stays before update or delete or truncate on result_version
for each statement execute function refuse_rewriting();
create trigger card_submission_stays before update or delete or truncate on card_submission
for each statement execute function refuse_rewriting();
create trigger starting_order_stays before update or delete or truncate on starting_order
for each statement execute function refuse_rewriting();
create trigger start_position_stays before update or delete or truncate on start_position
for each statement execute function refuse_rewriting();
