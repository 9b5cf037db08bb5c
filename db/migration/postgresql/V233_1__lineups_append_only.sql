-- See V012: a key of a row to itself keeps the table from being emptied.
alter table lineup add constraint lineup_never_emptied foreign key (id) references lineup (id);
create trigger lineup_stays before update or delete or truncate on lineup
for each statement execute function refuse_rewriting();
