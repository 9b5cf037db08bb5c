insert into record_head (id, number, digest)
values (1, 0, '0000000000000000000000000000000000000000000000000000000000000000');

create trigger record_line_stays before update, delete on record_line
for each row call 'rimebook.audit.AppendOnlyTrigger';
create trigger result_version_stays before update, delete on result_version
for each row call 'rimebook.audit.AppendOnlyTrigger';
create trigger card_submission_stays before update, delete on card_submission
for each row call 'rimebook.audit.AppendOnlyTrigger';
create trigger starting_order_stays before update, delete on starting_order
for each row call 'rimebook.audit.AppendOnlyTrigger';
create trigger start_position_stays before update, delete on start_position
for each row call 'rimebook.audit.AppendOnlyTrigger';

-- H2 asks no trigger before TRUNCATE, but refuses it where a foreign key leads to the table; a key
-- of a row to itself always holds.
alter table record_line add constraint record_line_never_emptied
foreign key (number) references record_line (number);
alter table result_version add constraint result_version_never_emptied
foreign key (id) references result_version (id);
alter table card_submission add constraint card_submission_never_emptied
foreign key (id) references card_submission (id);
alter table starting_order add constraint starting_order_never_emptied
foreign key (id) references starting_order (id);
alter table start_position add constraint start_position_never_emptied
foreign key (order_id, number) references start_position (order_id, number);
