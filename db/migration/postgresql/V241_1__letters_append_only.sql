-- See V012: a key of a row to itself keeps the table from being emptied.
alter table letter_sending add constraint letter_sending_never_emptied foreign key (id) references letter_sending (id);
create trigger letter_sending_stays before update or delete or truncate on letter_sending
for each statement execute function refuse_rewriting();
