-- See V012: a key of a row to itself keeps the table from being emptied.
alter table arrival_note add constraint arrival_note_never_emptied foreign key (id) references arrival_note (id);
create trigger arrival_note_stays before update or delete or truncate on arrival_note
for each statement execute function refuse_rewriting();
