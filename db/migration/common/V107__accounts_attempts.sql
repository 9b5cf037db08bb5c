-- How often what failed or was refused today, by kind and by account or network. Only so many are told apart a day;
-- the row named '*' has the rest. The row of kind 'lock' is what is held while counting.
create table attempt_tally (
  kind varchar(20) not null,
  subject varchar(120) not null,
  counted_on date not null,
  times int not null,
  primary key (kind, subject)
);
insert into attempt_tally (kind, subject, counted_on, times) values ('lock', '*', date '2026-01-01', 0);
