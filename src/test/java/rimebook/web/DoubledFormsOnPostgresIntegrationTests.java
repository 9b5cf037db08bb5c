package rimebook.web;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class DoubledFormsOnPostgresIntegrationTests extends DoubledFormsIntegrationTests {

}
